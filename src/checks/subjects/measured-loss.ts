import { measuredLoss } from "../../../calc/flow/measured-loss.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(measuredLoss);
