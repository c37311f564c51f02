import { narrow } from "../../calculators/engine/narrow.ts";
import { calculator } from "../../components/calculators.ts";
import { numbersInOrder, quickInOrder } from "../../components/contents.ts";
import { viewOf } from "../../components/quick-view.ts";
import { takesAndGives } from "../../components/takes-and-gives.ts";

/** What the list of numbers fetches when somebody says what they have and what they want. */
export async function GET(): Promise<Response> {
  const quick = (await quickInOrder()).map(({ id, data }) => ({
    href: `/quick/${id}/`,
    text: data.title,
    calculator: narrow(calculator(data.calculator), viewOf(id, data)),
  }));
  const numbers = (await numbersInOrder()).map(({ id, data }) => ({
    href: `/numbers/${id}/`,
    text: data.title,
    calculator: calculator(id),
  }));
  return Response.json(takesAndGives([...quick, ...numbers]));
}
