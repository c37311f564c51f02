import { explicit } from "../../relation/relation.ts";

/**
 * Power in W that a pump gives to the water: pressure difference in Pa, m³/s. The shaft needs more, by the efficiency.
 *
 * @example hydraulicPower.compute({ Delta_p: 285.4e3, V_w: 9 / 3600 }) // 713.5 W
 */
export const hydraulicPower = explicit({
  id: "circuit/pump/hydraulic-power",
  title: "Power given to the water",
  inputs: {
    Delta_p: { symbol: "Delta_p", kind: "pressureDifference" },
    V_w: { symbol: "V_w", kind: "liquidFlow" },
  },
  result: { symbol: "W_w", kind: "power" },
  expression: "Delta_p * V_w",
  sources: [
    {
      key: "white-fluid-mechanics",
      where: "chapter 11, power delivered to the fluid",
      standing: "from memory",
    },
  ],
  compute: ({ Delta_p, V_w }) => Delta_p * V_w,
});
