import { createRequire as evengroundRequire } from 'node:module'; const require = evengroundRequire(import.meta.url);
import{writeWhole}from"./part-U5C7WDN5.js";function print(text,output){output===void 0||output==="-"?process.stdout.write(text):writeWhole(output,text)}export{print};
