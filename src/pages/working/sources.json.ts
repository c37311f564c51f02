import { references } from "../../integrations/bibliography.ts";

/** Every source by its key, as a line of text: fetched when a calculator's sheet is printed. */
export function GET(): Response {
  return Response.json(Object.fromEntries([...references.values()].map(({ key, text }) => [key, text])));
}
