/** Ids that links of old carry, by what they are called now. A link is always written with the present ones. */
export interface Aliases {
  /** By the id of the calculator. */
  readonly calculators: Readonly<Record<string, string>>;
  /** Here and below by `calculator.id`, with the present id of the calculator. */
  readonly inputs: Readonly<Record<string, string>>;
  readonly results: Readonly<Record<string, string>>;
  /** By `calculator.choice.option`, with the present id of the choice. */
  readonly options: Readonly<Record<string, string>>;
  /** Inputs that are gone because nothing hangs on them: they are passed over without a word. */
  readonly retired: readonly string[];
}

export const aliases: Aliases = {
  calculators: {},
  inputs: {
    "charge-path.rho_3": "rho_m",
    "contributions.eta_s_1": "eta_s",
    "contributions.cooler_1": "cooler",
    "contributions.P_1": "P",
    "contributions.T_w_in_1": "T_w_in",
    "contributions.cooler_2": "cooler_45",
    "contributions.P_2": "P_45",
    "contributions.T_w_in_2": "T_w_in_45",
  },
  results: {
    "charge-path.W_t": "W_c12",
    "charge-path.p_m_found": "p_m",
    "static-total.p_dyn": "p_imp",
    "two-stage-split.W_t": "W_c12",
  },
  options: {
    "contributions.cooler.fitted": "effectiveness",
    "contributions.cooler_45.fitted": "effectiveness",
  },
  retired: ["cooler-rating.picture"],
};

const present = (table: Readonly<Record<string, string>>, key: string, old: string): string =>
  Object.hasOwn(table, key) ? (table[key] as string) : old;

/** What an id in a link is called now; one that no table names is itself. */
export const calculatorNow = (id: string, { calculators } = aliases): string => present(calculators, id, id);
export const inputNow = (calculator: string, id: string, { inputs } = aliases): string =>
  present(inputs, `${calculator}.${id}`, id);
export const resultNow = (calculator: string, id: string, { results } = aliases): string =>
  present(results, `${calculator}.${id}`, id);
export const optionNow = (
  calculator: string,
  choice: string,
  option: string,
  { options } = aliases,
): string => present(options, `${calculator}.${choice}.${option}`, option);
export const isRetired = (calculator: string, id: string, { retired } = aliases): boolean =>
  retired.includes(`${calculator}.${id}`);
