export { clubStudy } from './sample-study.ts';
export { houseStudy } from './sample-study-iec.ts';
