import { standInByLiquid } from "../../../calc/exchanger/stand-in-by-liquid.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(standInByLiquid);
