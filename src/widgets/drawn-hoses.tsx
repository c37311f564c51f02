import { layoutOf } from "./layout-of.ts";
import { HoseDrawing } from "./pictures/HoseDrawing.tsx";

/** Where the hoses of an arrangement go, and the same in words beside it. */
export default function DrawnHoses({ arrangement }: { arrangement: string }) {
  return <HoseDrawing layout={layoutOf(arrangement)} isSaid />;
}
