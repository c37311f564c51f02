import { coolerResponse } from "../../../calc/exchanger/response/cooler-response.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(coolerResponse);
