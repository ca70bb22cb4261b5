export const JOB = "job";
