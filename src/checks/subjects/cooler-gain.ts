import { coolerGain } from "../../../calc/charge/cooler-gain.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(coolerGain);
