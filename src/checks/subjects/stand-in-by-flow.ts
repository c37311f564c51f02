import { standInByFlow } from "../../../calc/exchanger/stand-in-by-flow.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(standInByFlow);
