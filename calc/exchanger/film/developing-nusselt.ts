import { explicit } from "../../relation/relation.ts";

/**
 * Mean Nusselt number of laminar flow in a round tube of one wall temperature that the fluid enters with an even speed, from the
 * Graetz number.
 *
 * @example developingNusselt.compute({ Gz: 50, Pr: 5 }) // 6.3064
 */
export const developingNusselt = explicit({
  id: "exchanger/film/developing-nusselt",
  title: "Nusselt number of laminar flow that develops",
  inputs: {
    Gz: { symbol: "Gz", kind: "ratio" },
    Pr: { symbol: "Pr", kind: "ratio" },
  },
  result: { symbol: "Nu", kind: "ratio" },
  expression:
    "(3.657 / tanh(2.264 * Gz^(-1 / 3) + 1.7 * Gz^(-2 / 3)) + 0.0499 * Gz * tanh(1 / Gz)) / tanh(2.432 * Pr^(1 / 6) * Gz^(-1 / 6))",

  sources: [
    {
      key: "baehr-stephan",
      where: "chapter 3, flow and temperature that both develop",
      standing: "from memory",
    },
  ],
  ranges: [
    {
      input: "Pr",
      from: 0.7,
      to: 11.3,
      says: "The formula is compared here with others within the bound only.",
    },
  ],
  compute: ({ Gz, Pr }) => {
    const third = Math.cbrt(1 / Gz);
    const thermal = 3.657 / Math.tanh(2.264 * third + 1.7 * third ** 2) + 0.0499 * Gz * Math.tanh(1 / Gz);
    return thermal / Math.tanh(2.432 * (Pr / Gz) ** (1 / 6));
  },
});
