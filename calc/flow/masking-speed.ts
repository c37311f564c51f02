import { explicit } from "../relation/relation.ts";

/**
 * Speed in the open passages over that with the whole face open, when the share x_b is blocked and the flow stays.
 *
 * @example maskingSpeed.compute({ x_b: 0.2 }) // 1.25
 */
export const maskingSpeed = explicit({
  id: "flow/masking-speed",
  title: "Speed in the passages of a masked core",
  inputs: {
    x_b: { symbol: "x_b", kind: "fraction" },
  },
  result: { symbol: "omega", kind: "ratio" },
  expression: "1 / (1 - x_b)",
  sources: [
    { key: "shah-sekulic-2003", where: "chapter 12, fouling and maldistribution", standing: "derived here" },
  ],
  compute: ({ x_b }) => 1 / (1 - x_b),
});
