import type { HoseDrawer } from "./drawing.ts";
import { HoseDrawing } from "./pictures/HoseDrawing.tsx";

/**
 * Draws where the hoses of an arrangement go, and says the same in words beside it. Its name stands there in full: a list
 * on a phone cuts it, and swapped hoses make another arrangement than the one in the list.
 */
export async function hoseDrawer(): Promise<HoseDrawer> {
  // Whatever shows hoses computes with arrangements and has fetched them: they are not in this part.
  const { arrangementOf } = await import("../../calc/exchanger/arrangements.ts");
  return ({ arrangement }) => {
    const { layout, name } = arrangementOf(arrangement);
    return <HoseDrawing layout={layout} name={name} />;
  };
}
