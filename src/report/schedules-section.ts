import { scheduleWords } from '../words/schedule-words.ts';
import { paragraph, type Section } from './block.ts';
import { arresterSchedule, conductorSchedule, jointSchedule } from './conductor-schedules.ts';
import { guySchedule } from './guy-schedule.ts';
import { crossingSchedule, lineSchedule } from './line-schedules.ts';
import type { PageContext } from './page-context.ts';
import {
  barSchedule,
  electrodeSchedule,
  equipmentSchedule,
  metalworkSchedule,
  supportSchedule,
} from './part-schedules.ts';

/** Every part of the site, each under the number that it has on the drawings. */
export function schedulesSection(page: PageContext): Section {
  const schedules = [
    ...electrodeSchedule(page),
    ...supportSchedule(page),
    ...guySchedule(page),
    ...barSchedule(page),
    ...arresterSchedule(page),
    ...equipmentSchedule(page),
    ...lineSchedule(page),
    ...crossingSchedule(page),
    ...conductorSchedule(page),
    ...jointSchedule(page),
    ...metalworkSchedule(page),
  ];
  const { heading, intro } = scheduleWords.schedules;
  return { id: 'schedules', heading, blocks: [paragraph(intro), ...schedules] };
}
