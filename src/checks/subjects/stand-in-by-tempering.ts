import { standInByTempering } from "../../../calc/exchanger/stand-in-by-tempering.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(standInByTempering);
