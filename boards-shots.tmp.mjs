import { chromium } from 'playwright';
const base=process.argv[2]; const out='/tmp/boards-shots'; import fs from 'node:fs'; fs.mkdirSync(out,{recursive:true});
const paths=JSON.parse(process.argv[3]);
const b=await chromium.launch({executablePath:'/usr/bin/chromium',args:['--no-sandbox','--disable-gpu','--disable-background-networking','--disable-component-update','--disable-sync']});
for (const [name,path] of Object.entries(paths)) for (const [s,w,h] of [['phone',390,844],['desk',1440,900]]) {
  const dark = process.argv[4]==='dark';
  const c=await b.newContext({viewport:{width:w,height:h},colorScheme:dark?'dark':'light',reducedMotion:'reduce'}); const p=await c.newPage();
  await p.goto(base+path,{waitUntil:'networkidle'}); await p.waitForTimeout(300);
  await p.screenshot({path:`${out}/${name}-${s}${dark?'-dark':''}.png`,fullPage:process.argv[5]==='full'}); await c.close();
}
await b.close();
