import type { Layout } from "../../../calc/exchanger/layout.ts";
import type { SI } from "../../../calc/quantity/domain-error.ts";

/** A number as the visitor reads it: `{ number: "126.4", unit: "°C" }`. */
export interface Shown {
  readonly number: string;
  readonly unit: string;
}

export type Show = (x: SI) => Shown;

/** A temperature unit as a scale to print: `shown` reads kelvin off it, `kelvin` is its inverse. */
export interface TemperatureScale {
  readonly unit: string;
  readonly shown: (kelvin: SI) => number;
  readonly kelvin: (shown: number) => SI;
}

/** Air at one station, in SI: kelvin, pascal absolute, kg/m³, kg of vapour per kg of dry air. */
export interface Station {
  /** The place in words: "compressor outlet". */
  readonly label: string;
  /** The station's number, site-wide: "0", "1", "2", "3", "m". */
  readonly number: string;
  readonly T: SI;
  readonly p: SI;
  readonly rho: SI;
  readonly w?: SI;
}

/** What lies between the station at index `after` and the next one. */
export interface Part {
  readonly kind: "compressor" | "cooler" | "duct";
  /** Drawn over the part in italics; empty draws none. */
  readonly label: string;
  readonly after: number;
  /** A compressor driven by belt or shaft stands on a foot. */
  readonly foot?: boolean;
  /** A cooler draws its water unless this is false; with the numbers that are known, as the visitor reads them. */
  readonly water?: false | Water;
}

export interface Water {
  readonly in?: Shown;
  readonly out?: Shown;
  readonly flow?: Shown;
}

/** The path not taken, drawn dashed: the same stations, in the same order. */
export interface Ghost {
  /** "without a cooler": the last station's temperature and density are put after it. */
  readonly label: string;
  readonly stations: readonly Station[];
}

export interface StationDiagramProps {
  readonly title: string;
  /** Two to six, in the order the air passes them. */
  readonly stations: readonly Station[];
  readonly parts: readonly Part[];
  readonly ghost?: Ghost;
  readonly show: {
    readonly temperature: Show;
    readonly pressure: Show;
    readonly density: Show;
    readonly humidity: Show;
    readonly temperatureScale: TemperatureScale;
  };
}

export interface Axis {
  /** "pressure ratio of the compressor" */
  readonly label: string;
  /** "" for a plain number. */
  readonly unit: string;
}

/** Everything in a chart is in the units of its axes, already converted by the caller. */
export interface ChartProps {
  readonly title: string;
  readonly x: Axis & { readonly from: number; readonly to: number };
  /** Without `from` and `to` the axis spans the curves and the state. */
  readonly y: Axis & { readonly from?: number; readonly to?: number };
  readonly curves: readonly Curve[];
  readonly state?: {
    readonly x: number;
    readonly y: number;
    readonly xText: string;
    readonly yText: string;
  };
  /** An optimum, marked by a cross. */
  readonly best?: { readonly x: number; readonly y: number; readonly label: string };
  readonly bands?: readonly Band[];
  readonly bounds?: readonly Bound[];
  /** It is drawn for a narrow place only: half as much to send. */
  readonly isSmall?: boolean;
}

export interface Curve {
  /** Stands on the curve; empty where the title says it. */
  readonly label: string;
  /** The case at hand, the alternative, the ideal. Solid where left out. */
  readonly dash?: "solid" | "alternative" | "ideal";
  /**
   * In order of x. A point that is not finite leaves a gap. One that only leads on to where the curve ends says so: the
   * axis does not follow it where the curve runs away there.
   */
  readonly points: readonly CurvePoint[];
}

export type CurvePoint = readonly [x: number, y: number, leadsOn?: boolean | undefined];

/** A span of x, shaded. */
export interface Band {
  readonly from: number;
  readonly to: number;
  readonly label: string;
}

/** A value of x that may not be passed: the side that is wrong is hatched. */
export interface Bound {
  readonly x: number;
  readonly label: string;
  readonly wrong: "above" | "below";
}

/** One quantity in every unit of its kind. */
export interface UnitScaleProps {
  readonly caption: string;
  readonly rows: readonly { readonly unit: string; readonly number: string }[];
}

/** Several ways to do one thing, ranked by one quantity, in the unit of the axis. */
export interface RankingProps {
  readonly title: string;
  /** "" for a plain number. */
  readonly unit: string;
  /** A value that is not finite is left out, with a sentence. */
  readonly rows: readonly {
    readonly label: string;
    readonly value: number;
    readonly number: string;
    /** The row is marked. */
    readonly isChosen?: boolean;
    /** A row of the table shows its hoses. */
    readonly layout?: Layout;
  }[];
  readonly best?: "highest" | "lowest";
  readonly note?: string;
}

/** One part of a sum, or the sum, in the unit of the drawing and as the visitor reads it. */
export interface Share {
  readonly label: string;
  readonly value: number;
  readonly number: string;
}

/** The parts of a sum, in the order in which they are added. */
export interface SharesProps {
  readonly title: string;
  /** "" for a plain number. */
  readonly unit: string;
  /** A value that is not finite is left out. */
  readonly rows: readonly Share[];
  /** Left out where its value is not finite. */
  readonly sum: Share;
  readonly note?: string;
}

/** States as a table: a row a state, a column a quantity. */
export interface StatesTableProps {
  readonly title: string;
  /** With its unit, where all numbers of the column have the same. */
  readonly columns: readonly string[];
  /** A number that is not known is undefined. A row without any is left out. */
  readonly rows: readonly { readonly label: string; readonly numbers: readonly (string | undefined)[] }[];
  readonly note?: string;
}
