import { z } from "zod";
import { REMINDER_CHOICES } from "./reminder-choice";

export const reminderChoiceSchema = z.enum(REMINDER_CHOICES, { error: "Choose how often you get reminders." });
