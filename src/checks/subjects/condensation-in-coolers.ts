import { condensationInCoolers } from "../../../calc/charge/condensation-in-coolers.ts";
import { modelSubject } from "../subject.ts";

/** One cooler, beside what the ambient air says. */
export default modelSubject((given: Parameters<typeof condensationInCoolers>[0], trace) => {
  const { first, w_0, T_dp_0 } = condensationInCoolers(given, trace);
  return { ...first, w_0, T_dp_0 };
});
