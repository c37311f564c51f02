import { rateMovingCooler } from "../../../calc/exchanger/moving-cooler.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(rateMovingCooler);
