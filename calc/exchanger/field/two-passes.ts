import type { Source } from "../../relation/relation.ts";

/** What holds inside two passes of many channels, whichever way the water is led. */
export const twoPassEquations = String.raw`\begin{gathered} \frac{\partial T}{\partial x} = -\mathrm{NTU}\,(T - T_\mathrm{w}) \\[1ex] \frac{\partial T_\mathrm{w}}{\partial y} = \frac{\mathrm{NTU}\,R}{2}\,(T - T_\mathrm{w}) \\[1ex] P = 1 - \int_0^1 T\rvert_{x=1}\,\mathrm{d}y \end{gathered}`;

export const twoPassSources: readonly [Source] = [
  {
    key: "shah-sekulic-2003",
    where: "chapter 3, balances of both streams in cross-flow",
    standing: "derived here",
  },
];

/** The words on the solution; `led` says how the water comes into its two passes. */
export const twoPassMethod = (led: string) =>
  `Temperatures are counted from the entering water, 0, to the entering air, 1; x runs with the air through the whole core, and y with the water through each pass. ${led} Solved with the box scheme on four grids, each twice as fine as the one before, and extrapolated to cells of no size.`;

export const twoPassAccuracy = "1 in 10⁹ for NTU to 10 and R to 4";
