import { explicit } from "../relation/relation.ts";

/**
 * Darcy friction factor of laminar flow in a round pipe, whatever its roughness. It is exact for a stream that has settled.
 *
 * @example laminarFrictionFactor.compute({ Re: 1500 }) // 0.042667
 */
export const laminarFrictionFactor = explicit({
  id: "flow/laminar-friction-factor",
  title: "Friction factor of laminar flow",
  inputs: {
    Re: { symbol: "Re", kind: "ratio" },
  },
  result: { symbol: "f", kind: "ratio" },
  expression: "64 / Re",
  sources: [
    { key: "white-fluid-mechanics", where: "chapter 6, laminar flow in a pipe", standing: "from memory" },
  ],
  ranges: [
    {
      input: "Re",
      from: 0,
      to: 2300,
      says: "The flow is laminar up to the bound; past it this friction factor is too low.",
    },
  ],
  compute: ({ Re }) => 64 / Re,
});
