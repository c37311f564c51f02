import { ambient } from "../../../calc/fluids/ambient.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(ambient);
