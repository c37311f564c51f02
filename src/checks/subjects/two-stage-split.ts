import { twoStageSplit } from "../../../calc/charge/two-stage-split.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(twoStageSplit);
