import { createRequire as evengroundRequire } from 'node:module'; const require = evengroundRequire(import.meta.url);
import{keptBrowser,printPdf}from"./part-DWC42BD4.js";import"./part-25DAOGO7.js";export{keptBrowser,printPdf};
