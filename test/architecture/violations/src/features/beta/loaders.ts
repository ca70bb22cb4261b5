export const LOADED = "loaded";
