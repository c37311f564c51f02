import { decayArea } from "../../numerics/decay-area.ts";
import { decayOfCells } from "./decay-of-cells.ts";
import type { BankSize, March } from "./march.ts";

/**
 * One stream is mixed and meets, cell by cell, the channels of the other. A channel in which the mixed stream has one
 * temperature comes nearer to it by `approach`, and the mixed stream comes nearer to the channels by `rate` a cell.
 */
interface Crossing {
  readonly approach: number;
  readonly rate: number;
}

/** Within a cell the entering channels are taken at their mean, and the mixed stream follows its exponential. */
function crossing({ approach, rate }: Crossing) {
  const gained = -Math.expm1(-rate);
  const lag = decayArea(rate, 1);
  return {
    leaves: (mixed: number, channel: number) => mixed + gained * (channel - mixed),
    mean: (mixed: number, channel: number) => channel + lag * (mixed - channel),
    channelLeaves: (mean: number, channel: number) => channel + approach * (mean - channel),
  };
}

/** Water mixed over the depth of the bank, one channel; air unmixed. */
export function oneChannelBank({ NTU, R, cells }: BankSize): March {
  const approach = -Math.expm1(-NTU);
  const { leaves, mean, channelLeaves } = crossing({ approach, rate: (R * approach) / cells });
  const decay = decayOfCells(NTU, cells);
  return (air, water, up, painted) => {
    let T_w = water[0] as number;
    for (let step = 0; step < cells; step++) {
      const row = up ? step : cells - 1 - step;
      const T = air[row] as number;
      const T_wm = mean(T_w, T);
      air[row] = channelLeaves(T_wm, T);
      T_w = leaves(T_w, T);
      if (painted === undefined) continue;
      const first = row * cells;
      painted.water.fill(T_wm, first, first + cells);
      for (let column = 0; column < cells; column++)
        painted.air[first + column] = T_wm + (T - T_wm) * (decay[column] as number);
    }
    water[0] = T_w;
  };
}

/** Air mixed over the whole bank's height at each depth; many channels of water. */
export function airMixedBank({ NTU, R, cells }: BankSize): March {
  const approach = -Math.expm1(-NTU * R);
  const { leaves, mean, channelLeaves } = crossing({ approach, rate: decayArea(R, NTU) / cells });
  const decay = decayOfCells(NTU * R, cells);
  return (air, water, up, painted) => {
    let T = air[0] as number;
    for (let column = 0; column < cells; column++) {
      const T_w = water[column] as number;
      const T_m = mean(T, T_w);
      water[column] = channelLeaves(T_m, T_w);
      T = leaves(T, T_w);
      if (painted === undefined) continue;
      for (let step = 0; step < cells; step++) {
        const cell = (up ? step : cells - 1 - step) * cells + column;
        painted.air[cell] = T_m;
        painted.water[cell] = T_m + (T_w - T_m) * (decay[step] as number);
      }
    }
    air.fill(T);
  };
}

/** Both streams mixed. The means of both follow from each other, so that nothing is approximated. */
export function bothMixedBank({ NTU, R, cells }: BankSize): March {
  const ofAir = decayArea(NTU, 1);
  const ofWater = decayArea(NTU * R, 1);
  const airDecay = decayOfCells(NTU, cells);
  const waterDecay = decayOfCells(NTU * R, cells);
  return (air, water, up, painted) => {
    const T = air[0] as number;
    const T_w = water[0] as number;
    const T_m = (ofAir * T + (1 - ofAir) * ofWater * T_w) / (1 - (1 - ofAir) * (1 - ofWater));
    const T_wm = ofWater * T_w + (1 - ofWater) * T_m;
    const exchanged = NTU * (T_m - T_wm);
    air.fill(T - exchanged);
    water[0] = T_w + R * exchanged;
    if (painted === undefined) return;
    for (let step = 0; step < cells; step++) {
      const first = (up ? step : cells - 1 - step) * cells;
      painted.water.fill(T_m + (T_w - T_m) * (waterDecay[step] as number), first, first + cells);
      for (let column = 0; column < cells; column++)
        painted.air[first + column] = T_wm + (T - T_wm) * (airDecay[column] as number);
    }
  };
}
