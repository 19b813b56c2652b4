import { createRequire as evengroundRequire } from 'node:module'; const require = evengroundRequire(import.meta.url);
var version="0.1.0";export{version};
