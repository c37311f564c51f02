import { unevenFlow } from "../../../calc/exchanger/uneven-flow.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(unevenFlow);
