import { units } from "../../calc/quantity/units.ts";

/** What a reader sees of a unit; nothing for the plain number. */
export const unitLabel = (id: string): string => units[id]?.label ?? id;
