import { powerTorque } from "../../../calc/engine/power-torque.ts";
import { modelSubject } from "../subject.ts";

export default modelSubject(powerTorque);
