/** Garment templates of our own: a pattern from gauge, sizes, ease and a handful of preferences. */
export { isRepeatCoarse, patternFromTemplate } from "./pattern-from-template";
export {
  SLEEVES,
  TEMPLATE_IDS,
  TEMPLATES,
  type TemplateId,
  type TemplateRequest,
  type TemplateWords,
} from "./template-request";
