/**
 * What every relation P(NTU, R) has in common: both numbers and the effectiveness are on the air. NTU from 0 on, where
 * Infinity gives the limit; R from 0 on.
 */
export const onTheAir = {
  inputs: {
    NTU: { symbol: "NTU", kind: "ratio" },
    R: { symbol: "R", kind: "ratio" },
  },
  result: { symbol: "P", kind: "fraction" },
} as const;
