import type { Arrangement } from "../../../../calc/exchanger/arrangement.ts";
import { arrangements } from "../../../../calc/exchanger/arrangements.ts";
import { csvOf, tableOf } from "../../../components/effectiveness-table.ts";

export const getStaticPaths = () =>
  arrangements.map((arrangement) => ({ params: { id: arrangement.id }, props: { arrangement } }));

export const GET = ({ props }: { readonly props: { readonly arrangement: Arrangement } }) =>
  new Response(csvOf(tableOf(props.arrangement)), { headers: { "content-type": "text/csv; charset=utf-8" } });
