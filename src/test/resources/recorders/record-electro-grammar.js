// Records what npm electro-grammar 1.3.0 makes of written values:
//   npm install electro-grammar@1.3.0 && node record-electro-grammar.js electro-grammar.csv
const g=require('electro-grammar');
const texts=[];
for (const v of ["10","4.7","47","470","1","2.2","330"]) for (const p of ["","R","k","K","M","ohm","kohm"," ohm"," k"," kohm","Ω","kΩ"," kΩ"]) texts.push(v+p);
for (const s of ["4k7","4R7","R47","0R47","2M2","47K3","1k5","470R","1M0","4.7k 5%","4k7 1%","10k 0805","4.7 kOhm","100R 1/4W","100R 0.25W","1k 1% 0.25W"]) texts.push(s);
for (const v of ["1","4.7","10","22","100","470","0.1","0.01"]) for (const p of ["pF","nF","uF","µF","μF"," uF"," pF","mF"]) texts.push(v+p);
for (const s of ["100nF 50V","10uF 25V","0.1uF 10%","22pF C0G","100nF X7R 50V","4u7","4n7","100n","1u","10uF/25V","100nF/50V","10 uF 16 V"]) texts.push(s);
const out=["# source: npm electro-grammar 1.3.0 (MIT), parse(), run with node "+process.version,"# where: src/test/resources/recorders/record-electro-grammar.js made it","# read on: 2026-11-25","# tolerance: exact","text,kind,value,tolerance percent,voltage,power"];
for (const t of [...new Set(texts)]) { const r=g.parse(t); const val=r.resistance??r.capacitance??''; out.push([/[,"]/.test(t)?'"'+t+'"':t, r.type||'', val, r.tolerance??'', r.voltage_rating??'', r.power_rating??''].join(',')); }
require('fs').writeFileSync(process.argv[2], out.join('\n')+'\n')
