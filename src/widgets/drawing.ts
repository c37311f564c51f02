import type { ComponentType } from "preact";
import type { SI } from "../../calc/quantity/domain-error.ts";
import type { Calculator, Picture } from "../calculators/engine/calculator.ts";
import type { Surroundings } from "../calculators/engine/entry.ts";
import type { Given } from "../calculators/engine/evaluate.ts";

/** The state that a picture shows. */
export interface State {
  readonly calculator: Calculator;
  readonly given: Given;
  readonly values: Readonly<Record<string, SI | undefined>>;
  readonly around: Surroundings;
}

/** Draws one kind of picture. */
export type Drawer = ComponentType<{ picture: Picture<string, string>; state: State }>;

type Draw = Picture<string, string>["draw"];

/** How each kind of picture is fetched: a page takes only the kind that it shows, and after its fields work. */
const parts: Readonly<Record<Draw, () => Promise<{ readonly default: Drawer }>>> = {
  chart: () => import("./drawn-chart.tsx"),
  stations: () => import("./drawn-stations.tsx"),
  units: () => import("./drawn-units.tsx"),
  field: () => import("./drawn-field.tsx"),
  ranking: () => import("./drawn-ranking.tsx"),
  shares: () => import("./drawn-shares.tsx"),
  states: () => import("./drawn-states.tsx"),
};

/** The drawers at hand: all of them at build, those fetched so far in the browser. */
export const drawers: Partial<Record<Draw, Drawer>> = {};

/** Brings a drawer to hand. */
export async function fetchDrawer(draw: Draw): Promise<void> {
  drawers[draw] ??= (await parts[draw]()).default;
}

/** Draws the hoses of an arrangement, with its sentence. */
export type HoseDrawer = ComponentType<{ arrangement: string }>;

/** At hand as the drawers are. */
export const hoses: { drawer?: HoseDrawer } = {};

/** Brings it to hand. */
export async function fetchHoses(): Promise<void> {
  hoses.drawer ??= await (await import("./drawn-hoses.tsx")).hoseDrawer();
}

/** Brings all of them to hand: before pages are built. */
export const fetchDrawers = (): Promise<unknown> =>
  Promise.all([...(Object.keys(parts) as Draw[]).map(fetchDrawer), fetchHoses()]);
