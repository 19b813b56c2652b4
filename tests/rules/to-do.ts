/** Rows of the table of conditions that are neither a rule nor listed as not stated yet. Ids are only ever taken out. */
export const toDo: readonly string[] = [];
