export const MAX_CREDIT_NAME_LENGTH = 100;
export const MAX_PAYMENT_LENGTH = 200;

/** What a designer notes about the rewards of one or several testers. */
export const REWARD_STEPS = ["pattern-sent", "pattern-not-sent", "named", "not-named", "payment"] as const;

export type RewardStep = (typeof REWARD_STEPS)[number];
