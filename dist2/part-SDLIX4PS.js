import { createRequire as evengroundRequire } from 'node:module'; const require = evengroundRequire(import.meta.url);
var exitCode={fine:0,findings:1,input:2,fault:3,output:4},Stop=class extends Error{code;constructor(code,sentence){super(sentence),this.code=code}};export{exitCode,Stop};
