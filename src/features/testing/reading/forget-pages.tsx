"use client";

import { useEffect } from "react";
import { forgetPages } from "./kept-page";

/** Removes every kept page from this browser, where people arrive who have signed out or deleted their data. */
export function ForgetPages() {
  useEffect(() => void forgetPages(), []);
  return null;
}
