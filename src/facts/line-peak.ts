export { boxesOnLine, linePeak, linePower, lineSwr, sparkOverBand } from '../network/line-peak.ts';
