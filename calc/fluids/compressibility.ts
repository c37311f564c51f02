import { constants } from "../constants.ts";
import { explicit } from "../relation/relation.ts";

const R_a = constants.R_a.value;

/**
 * How many times the volume of an ideal gas the real air takes: below 1 it is denser than the ideal gas says.
 * B in m³/kg from fluids/second-virial, p in Pa absolute, T in K. Within 0.2 % to 2 MPa, 230 to 600 K.
 *
 * @example compressibility.compute({ B: secondVirial.compute({ T: 280 }), p: 6e5, T: 280 }) // 0.9969
 */
export const compressibility = explicit({
  id: "fluids/compressibility",
  title: "Compressibility factor",
  inputs: {
    B: { symbol: "B", kind: "specificVolume" },
    p: { symbol: "p", kind: "pressure" },
    T: { symbol: "T", kind: "temperature" },
  },
  result: { symbol: "Z", kind: "ratio" },
  expression: "1 + B * p / (R_a * T)",
  sources: [
    {
      key: "lemmon-2000",
      where: "virial equation, cut after the second coefficient",
      standing: "derived here",
    },
  ],
  accuracy: "0.1 % to 1 MPa, 0.2 % to 2 MPa",
  compute: ({ B, p, T }) => 1 + (B * p) / (R_a * T),
});
