"use server";

import { chosenTestersAction } from "./chosen-testers-action";
import { freeSpots, returnSpot } from "./spot-mutations";

/** Opens the spots of one or several testers who gave no sign. */
export const openSpots = chosenTestersAction(async (access, testerIds) => {
  await freeSpots(access, testerIds);
  return undefined;
});

/** Gives such a spot back as long as it is open. */
export const giveSpotBack = chosenTestersAction(async (access, [testerId = ""]) => {
  await returnSpot(access, testerId);
  return undefined;
});
