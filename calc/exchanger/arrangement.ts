import type { Relation } from "../relation/relation.ts";
import type { Layout } from "./layout.ts";

/** One way in which air and water may pass each other, with its effectiveness. */
export interface Arrangement {
  /** Part of public links. */
  readonly id: string;
  /** In the words of the trade and of exchanger standards: "Counter-cross-flow, two passes, one channel each". */
  readonly name: string;
  /** Where it is met and what marks it: one or two sentences. */
  readonly says: string;
  readonly layout: Layout;
  /** P = P(NTU, R), on the air throughout. */
  readonly effectiveness: Relation<"NTU" | "R">;
  /** P has its maximum at a finite NTU, from which on more area makes it worse. */
  readonly peaks: boolean;
  /** The id of what it becomes when the two water hoses are swapped, where that makes a difference. */
  readonly swapped?: string;
}
