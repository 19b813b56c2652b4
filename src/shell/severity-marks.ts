/** How a terminal shows what a finding weighs. */
export const severityMarks = { hazard: 'HAZARD', defect: 'DEFECT', advice: 'ADVICE' } as const;
export const severityColours = { hazard: 'red', defect: 'yellow', advice: 'cyan' } as const;
