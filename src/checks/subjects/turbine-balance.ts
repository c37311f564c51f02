import { turbineBalance } from "../../../calc/charge/turbine-balance.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(turbineBalance);
