export { JOB } from "../../worker/job";
