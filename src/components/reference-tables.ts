import type { ReferenceTable } from "./reference-table.ts";

const files = import.meta.glob<{ default: ReferenceTable }>("./tables/*.ts", { eager: true });

/** Every reference table, in order. */
export const referenceTables: readonly ReferenceTable[] = Object.values(files)
  .map((file) => file.default)
  .sort((a, b) => a.order - b.order);

/** The name of the file of a sheet, below /tables/ and without its ending. */
export const fileOfSheet = (table: ReferenceTable, sheet: { readonly id: string }): string =>
  `${table.id}-${sheet.id}`;
