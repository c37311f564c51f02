import type { Source } from "../../relation/relation.ts";

// What the relations of two passes of many channels say alike. Formulas are functions here, so that the browser's code goes
// without them: a tagged template that nobody reads would stay in it.

export const twoPassSources: readonly [Source, Source] = [
  {
    key: "shah-sekulic-2003",
    where: "chapter 3, balances of both streams in cross-flow",
    standing: "derived here",
  },
  {
    key: "goldstein-1953",
    where: "the function J, which solves the balances of one bank",
    standing: "from memory",
  },
];

export const twoPassAccuracy = "1 in 10¹¹ for NTU to 60 and R to 20";

/** The lines of a formula, one below the other. */
export const lines = (...tex: readonly string[]) =>
  String.raw`\begin{gathered} ${tex.join(String.raw` \\[1.5ex] `)} \end{gathered}`;

export const banks = () =>
  String.raw`N = \frac{\mathrm{NTU}}{2} \qquad N_\mathrm{w} = \frac{R\,\mathrm{NTU}}{2}`;

/** Both streams as they leave a bank that they entered at 1 and at 0. */
export const airOfBank = () => String.raw`T(\eta) = J(N,\, N_\mathrm{w} \eta)`;
export const waterOfBank = () => String.raw`T_\mathrm{w}(\xi) = 1 - J(N_\mathrm{w},\, N \xi)`;

export const takenByBoth = () =>
  String.raw`P_\mathrm{p} = \int_0^1 (1 - T)\,\mathrm{d}\eta \qquad P_\mathrm{b} = \int_0^1 T\,(1 - T)\,\mathrm{d}\eta`;

export const functionJ = () =>
  String.raw`J(x, y) = 1 - \int_0^x k(t, y)\,\mathrm{d}t \\[1.5ex] k(x, y) = e^{-x - y}\, I_0\bigl(2 \sqrt{x y}\bigr)`;

const scale =
  "Temperatures are counted from the entering water, 0, to the entering air, 1; N and N_w are the transfer units of one bank on each stream; η runs from 0 to 1 with the water through a bank";
const bothWays = () => `${scale}, and ξ with the air.`;
const gauss =
  "by Gauss's rule, with so many points that eleven digits are right. I_0 is the modified Bessel function of order zero.";

const bothCold =
  "With water that enters both banks at 0, the bank in front takes P_p off the air, and leaves it at T; the bank behind takes P_b more.";

/** Water mixed in the return header; `led` says how it comes into its two passes. */
export const headerMethod = (led: string) =>
  `${scale}. ${led} ${bothCold} The rest of the formula is what the warmth of the water in the header changes, since a bank answers in proportion to each stream that enters it. The integrals are taken ${gauss}`;

/** Every channel goes on as itself, the water with the air. */
export const parallelMethod = (led: string) =>
  `${bothWays()} ${led} ${bothCold} The water leaves the bank in front at T_w, and the last integral is what it gives back in the bank behind. All are taken ${gauss}`;

/** Every channel goes on as itself, the water against the air. */
export const counterMethod = (led: string) =>
  `${bothWays()} ${led} T is the air between the banks, along the way of the water in front, and T_w the water between them, along the way of the air behind. Each follows from the other; both are found ${gauss}`;
