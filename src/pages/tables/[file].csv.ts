import { csvOf, type Sheet } from "../../components/reference-table.ts";
import { fileOfSheet, referenceTables } from "../../components/reference-tables.ts";

export const getStaticPaths = () =>
  referenceTables.flatMap((table) =>
    table.sheets.map((sheet) => ({ params: { file: fileOfSheet(table, sheet) }, props: { sheet } })),
  );

export const GET = ({ props }: { readonly props: { readonly sheet: Sheet } }) =>
  new Response(csvOf(props.sheet), { headers: { "content-type": "text/csv; charset=utf-8" } });
