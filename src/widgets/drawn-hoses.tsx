import { arrangementOf } from "../../calc/exchanger/arrangements.ts";
import { HoseDrawing } from "./pictures/HoseDrawing.tsx";

/**
 * Where the hoses of an arrangement go, and the same in words beside it. Its name stands there in full: a list on a phone
 * cuts it, and swapped hoses make another arrangement than the one in the list.
 */
export default function DrawnHoses({ arrangement }: { arrangement: string }) {
  const { layout, name } = arrangementOf(arrangement);
  return <HoseDrawing layout={layout} name={name} />;
}
