import { createRequire as evengroundRequire } from 'node:module'; const require = evengroundRequire(import.meta.url);
import{findBrowser}from"./part-HG6ZTZF2.js";import"./part-DWC42BD4.js";import{readSite,runStudy}from"./part-DZ5LFJ2P.js";import"./part-MNRF2BME.js";import"./part-AFNZLEUB.js";import"./part-QYQL6G7G.js";import"./part-25DAOGO7.js";export{findBrowser,readSite,runStudy};
