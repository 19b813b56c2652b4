import { layout as case01 } from './case-01.ts';
import { layout as case03 } from './case-03.ts';
import { layout as case04 } from './case-04.ts';
import { layout as case05 } from './case-05.ts';
import { layout as case07 } from './case-07.ts';
import { layout as case08 } from './case-08.ts';
import { layout as case10 } from './case-10.ts';
import { layout as case11 } from './case-11.ts';
import { layout as case12 } from './case-12.ts';
import { layout as case14 } from './case-14.ts';
import { layout as case15 } from './case-15.ts';
import { layout as case17 } from './case-17.ts';
import { layout as case18 } from './case-18.ts';
import { layout as case20 } from './case-20.ts';
import { layout as case21 } from './case-21.ts';
import { layout as case23 } from './case-23.ts';
import { layout as case24 } from './case-24.ts';
import { layout as case26 } from './case-26.ts';
import { layout as case27 } from './case-27.ts';
import { layout as case28 } from './case-28.ts';
import { layout as case30 } from './case-30.ts';
import { layout as case32 } from './case-32.ts';
import { layout as case33 } from './case-33.ts';
import { layout as case34 } from './case-34.ts';
import { layout as case36 } from './case-36.ts';
import { layout as case37 } from './case-37.ts';
import { layout as case39 } from './case-39.ts';
import { layout as case40 } from './case-40.ts';
import { layout as case41 } from './case-41.ts';
import { layout as case43 } from './case-43.ts';
import { layout as case44 } from './case-44.ts';
import { layout as case46 } from './case-46.ts';
import { layout as case47 } from './case-47.ts';
import { layout as case49 } from './case-49.ts';
import { layout as case50 } from './case-50.ts';
import { layout as case52 } from './case-52.ts';
import { layout as case53 } from './case-53.ts';
import { layout as case55 } from './case-55.ts';
import { layout as case56 } from './case-56.ts';
import { layout as case58 } from './case-58.ts';
import { layout as case59 } from './case-59.ts';
import { layout as case61 } from './case-61.ts';
import { layout as case62 } from './case-62.ts';
import { layout as case64 } from './case-64.ts';
import { layout as case65 } from './case-65.ts';
import { layout as case67 } from './case-67.ts';
import { layout as case68 } from './case-68.ts';
import { layout as case70 } from './case-70.ts';
import type { Layout } from './claim.ts';

/** Every real-life layout, in the order of its number. */
export const layouts: readonly Layout[] = [
  case01,
  case03,
  case04,
  case05,
  case07,
  case08,
  case10,
  case11,
  case12,
  case14,
  case15,
  case17,
  case18,
  case20,
  case21,
  case23,
  case24,
  case26,
  case27,
  case28,
  case30,
  case32,
  case33,
  case34,
  case36,
  case37,
  case39,
  case40,
  case41,
  case43,
  case44,
  case46,
  case47,
  case49,
  case50,
  case52,
  case53,
  case55,
  case56,
  case58,
  case59,
  case61,
  case62,
  case64,
  case65,
  case67,
  case68,
  case70,
];
