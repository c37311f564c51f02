import { type StaticTotalGiven, staticTotal } from "../../../calc/flow/static-total.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject<Omit<StaticTotalGiven, "section">>((given, trace) =>
  staticTotal({ ...given, section: "bore" }, trace),
);
