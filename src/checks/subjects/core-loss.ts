import { coreLoss } from "../../../calc/flow/core-loss.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(coreLoss);
