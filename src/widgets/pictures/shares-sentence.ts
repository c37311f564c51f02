import { counted, written } from "./shares-layout.ts";
import { asSentence } from "./text.ts";
import type { Share, SharesProps } from "./types.ts";

/** The parts of a sum as a sentence: the largest of them, what part of the sum it is, and the sum. */
export function describeShares(props: SharesProps): string {
  const { parts, sum, isSigned } = counted(props);
  const say = (share: Share) => `${share.label}, ${written(share, props.unit, false)}`;
  const by = (sign: 1 | -1) =>
    parts.reduce<Share | undefined>(
      (most, one) => (sign * one.value > Math.max(0, sign * (most?.value ?? 0)) ? one : most),
      undefined,
    );
  const [gain, loss] = [by(1), by(-1)];
  const share =
    gain && sum && sum.value > 0 && !isSigned ? Math.round((100 * gain.value) / sum.value) : undefined;
  return [
    props.title,
    !gain && !loss && "Every part is zero",
    gain &&
      !loss &&
      `The largest part is ${say(gain)}${share === undefined ? "" : `, ${share} % of the sum`}`,
    gain && loss && `What adds most is ${say(gain)}`,
    loss && `What takes away most is ${say(loss)}`,
    sum && `The sum is ${say(sum)}`,
  ]
    .filter((text) => typeof text === "string")
    .map(asSentence)
    .join(" ");
}
