import { explicit } from "../relation/relation.ts";

/**
 * Mass of dry air in a cubic metre of moist air, kg/m³. It carries the oxygen.
 *
 * @example dryAirDensity.compute({ rho: 1.157, w: 0.02 }) // 1.134 kg/m³
 */
export const dryAirDensity = explicit({
  id: "fluids/dry-air-density",
  title: "Density of the dry air in moist air",
  inputs: {
    rho: { symbol: "rho", kind: "density" },
    w: { symbol: "w", kind: "humidityRatio" },
  },
  result: { symbol: "rho_da", kind: "density" },
  expression: "rho / (1 + w)",
  sources: [
    {
      key: "ashrae-2017",
      where: "chapter 1, ideal-gas mixture of air and vapour",
      standing: "open reference read",
    },
  ],
  compute: ({ rho, w }) => rho / (1 + w),
});
