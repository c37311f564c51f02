import type { CheckResult } from "../../checks/run-check.ts";
import { runChecks } from "../../checks/run-checks.ts";
import { casesAsCsv } from "../../components/cases.ts";

export const getStaticPaths = () =>
  runChecks().map((result) => ({ params: { id: result.check.id }, props: { result } }));

export const GET = ({ props }: { readonly props: { readonly result: CheckResult } }) =>
  new Response(casesAsCsv(props.result), { headers: { "content-type": "text/csv; charset=utf-8" } });
