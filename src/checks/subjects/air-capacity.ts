import { airCapacity } from "../../../calc/exchanger/air-capacity.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(airCapacity);
