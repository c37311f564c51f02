import type { SI } from "../../../calc/quantity/domain-error.ts";
import type { Kind } from "../../../calc/quantity/kinds.ts";
import type { AnyRelation } from "../../../calc/relation/relation.ts";
import type { Model } from "../../../calc/relation/trace.ts";

/** Shown only while each named choice holds one of the listed options. */
export type When = Readonly<Record<string, readonly string[]>>;

/** A number that the visitor gives. Numbers are in SI. */
export interface Field {
  readonly label: string;
  readonly symbol: string;
  readonly kind: Kind;
  /** The example value that stands in the field until it is touched. */
  readonly start: SI;
  /** Values outside are refused, with the bound named. */
  readonly limits: readonly [SI, SI];
  /** Values outside are kept, with a note. */
  readonly typical?: readonly [SI, SI];
  readonly help: string;
  /** The field is the site's barometer: it shows the reading, and typing here sets it. */
  readonly barometer?: true;
  /** It is counted: the model takes whole numbers only. */
  readonly whole?: true;
  readonly when?: When;
  /** Starts a group of inputs under this heading: “Compressor”. */
  readonly heading?: string;
}

/** A choice between named options. */
export interface Choice {
  readonly label: string;
  readonly options: Readonly<Record<string, string>>;
  readonly start: string;
  readonly help: string;
  readonly when?: When;
  readonly heading?: string;
  /** The arrangement whose hoses are drawn under it, by its id; with the choices made, this one among them. */
  readonly drawn?: (choices: Readonly<Record<string, string>>) => string;
}

export type Input = Field | Choice;

export interface Outcome {
  readonly label: string;
  readonly symbol: string;
  readonly kind: Kind;
  readonly when?: When;
  /** The input that this is once more, in another unit. */
  readonly converts?: string;
  /** Stands in the picture alone, not in the list of results. */
  readonly inPicture?: true;
  /** Starts a group of results under this heading, whether or not this one is in sight. */
  readonly heading?: string;
}

/** A chart of one outcome against one input, drawn through the model. */
export interface ChartPicture<I extends string, O extends string> {
  readonly draw: "chart";
  /** The input that is swept, from and to (SI), and choices that must hold for it to count. */
  readonly vary: I;
  readonly span: readonly [SI, SI];
  readonly holding?: Partial<Record<I, string>>;
  /**
   * An outcome that is the value of `vary` at which `y` is best: marked with these words, and within the span. Where the
   * outcome is missing there is no best.
   */
  readonly best?: { readonly at: O; readonly label: string };
  /** A span of `vary` between two outcomes, shaded and named. Left out where one of them has no value. */
  readonly bands?: readonly { readonly from: O; readonly to: O; readonly label: string }[];
  /** Values of `vary`, held by outcomes, which may not be passed: a line with its name, hatched on the wrong side. */
  readonly bounds?: readonly { readonly at: O; readonly label: string; readonly wrong: "above" | "below" }[];
  /** The input or outcome on the x axis at the present state. */
  readonly x: I | O;
  readonly y: O;
  readonly curves: readonly {
    readonly label: string;
    readonly dash?: "solid" | "alternative" | "ideal";
    readonly with?: Partial<Record<I, SI | string>>;
    /** Another outcome than `y`, of the same kind. */
    readonly y?: O;
  }[];
  readonly title: string;
}

/** A place on the path of the air, and the outcomes that hold its state. */
export interface StationOf<O extends string> {
  readonly number: string;
  readonly label: string;
  readonly T: O;
  readonly p: O;
  readonly rho: O;
  readonly w: O;
}

export interface StationPicture<O extends string> {
  readonly draw: "stations";
  readonly stations: readonly StationOf<O>[];
  readonly parts: readonly {
    readonly kind: "compressor" | "cooler" | "duct";
    readonly label: string;
    readonly after: number;
    /** The water of a cooler, where the model has it. */
    readonly water?: { readonly T_in: O; readonly T_out: O; readonly m: O };
  }[];
  /** The same path with one choice changed, drawn dashed. */
  readonly ghost?: Readonly<Record<string, string>>;
  readonly title: string;
}

/** One quantity in every unit of its kind. */
export interface UnitsPicture {
  readonly draw: "units";
  readonly title: string;
}

/** Temperatures inside a core, from the side. Not for shells, which have no field: `when` leaves them out. */
export interface FieldPicture<I extends string, O extends string> {
  readonly draw: "field";
  /** The arrangement's id, by what is given and chosen. */
  readonly arrangement: (given: Readonly<Record<string, SI | string>>) => string;
  /** On the air. */
  readonly NTU: O;
  readonly R: O;
  /** Temperatures of entering air and entering water. */
  readonly hot: I | O;
  readonly cold: I | O;
  /** Mean temperatures of leaving air and leaving water, where the model has them: then all numbers agree to the last digit. */
  readonly airOut?: O;
  readonly waterOut?: O;
  readonly title: string;
}

/** Outcomes of one kind on one axis, the best first, and as a table. Those without a value are left out, and named. */
export interface RankingPicture<O extends string> {
  readonly draw: "ranking";
  readonly rows: readonly {
    readonly label: string;
    readonly y: O;
    /** The arrangement whose hoses the table shows, by its id. */
    readonly arrangement?: string;
  }[];
  /** The arrangement that the choices make, whose row is marked. */
  readonly chosen?: (given: Readonly<Record<string, unknown>>) => string;
  /** The highest is the best unless this says otherwise. */
  readonly best?: "highest" | "lowest";
  readonly title: string;
  readonly note?: string;
}

/**
 * The parts of a sum as bars, each of which starts where the one before ended, and the sum under them. Parts may be
 * negative. Those without a value are left out.
 */
export interface SharesPicture<O extends string> {
  readonly draw: "shares";
  readonly rows: readonly { readonly label: string; readonly y: O }[];
  readonly sum: { readonly label: string; readonly y: O };
  readonly title: string;
  readonly note?: string;
}

/** A table of states: a row a state, a column a quantity. A row without any value is left out. */
export interface StatesPicture<O extends string> {
  readonly draw: "states";
  readonly columns: readonly string[];
  readonly rows: readonly { readonly label: string; readonly values: readonly O[] }[];
  readonly title: string;
  readonly note?: string;
}

export type Picture<I extends string, O extends string> = (
  | ChartPicture<I, O>
  | StationPicture<O>
  | UnitsPicture
  | FieldPicture<I, O>
  | RankingPicture<O>
  | SharesPicture<O>
  | StatesPicture<O>
) & { readonly when?: When };

/** Everything that a calculator is. Fields, messages, working, picture, link and page follow from it. */
export interface Calculator<I extends string = string, O extends string = string> {
  /** The file's name. Part of public links. */
  readonly id: string;
  readonly title: string;
  /** Narrowed to a part of a calculator, with examples of its own. */
  readonly isPart?: true;
  readonly group: string;
  /** The question it answers, in a person's words. */
  readonly asks: string;
  readonly inputs: Readonly<Record<I, Input>>;
  /** In the order shown; the first one that applies is the answer. */
  readonly results: Readonly<Record<O, Outcome>>;
  /** Every relation that any branch may use; a test proves it complete. */
  readonly relations: readonly AnyRelation[];
  /** A result that has no meaning at a state is left out or undefined. */
  readonly model: Model<Record<I, SI | string>, { readonly [id in O]?: SI | undefined }>;
  /** The first one whose condition holds is drawn. */
  readonly pictures?: readonly Picture<NoInfer<I>, NoInfer<O>>[];
  /** Drawn under it, in the same way. */
  readonly also?: readonly Picture<NoInfer<I>, NoInfer<O>>[];
}

/** Keeps the names of inputs and results while a definition is written, and widens them for those who use it. */
export const defineCalculator = <I extends string, O extends string>(
  calculator: Calculator<I, O>,
): Calculator => calculator as unknown as Calculator;

export const isChoice = (input: Input): input is Choice => "options" in input;
