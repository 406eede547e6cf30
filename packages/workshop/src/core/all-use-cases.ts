import { changePassword, signOutEverywhere, whoAmI } from "../identity/own-account";
import type { UseCase } from "./use-case";

/**
 * Every use case there is, for the test that holds each against every role and against none.
 * A use case that is not listed here fails that test's count.
 */
export const allUseCases = [whoAmI, signOutEverywhere, changePassword] as unknown as readonly UseCase[]; // Each takes its own input; the table only asks names and permissions.
