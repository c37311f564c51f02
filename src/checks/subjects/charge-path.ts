import { chargePath } from "../../../calc/charge/charge-path.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(chargePath);
