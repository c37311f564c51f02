import { turbineBalance } from "../../../calc/compression/turbine-balance.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(turbineBalance);
