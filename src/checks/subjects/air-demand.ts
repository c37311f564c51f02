import { airDemand } from "../../../calc/engine/air-demand.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(airDemand);
