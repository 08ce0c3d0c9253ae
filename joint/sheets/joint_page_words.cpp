#include "joint/sheets/joint_page_words.h"

namespace sheerlap {

const char* const page_links = R"html(<nav aria-label="On this page">
<a href="#checks">Checks and cautions</a>
<a href="#hull" class="scripted">This hull</a>
<a href="#plan">Plan</a>
<a href="#charts">Gap and beads</a>
<a href="#hole" class="scripted">Chosen hole</a>
{}<a href="#schedule">Drilling schedule</a>
{}</nav>
)html";

const char* const hull_controls = R"html(<section id="hull" aria-labelledby="hull-name">
<h2 id="hull-name">This hull</h2>
<div class="controls scripted">
<label>Hull number <input id="hull-number" list="hull-list" autocomplete="off" size="14"></label>
<datalist id="hull-list"></datalist>
<output id="hull-count"></output>
<button type="button" id="save">Save to a file</button>
<label class="button">Load from a file <input type="file" id="load" accept=".csv,text/csv"></label>
<button type="button" id="clear">Clear this hull</button>
<button type="button" id="print">Print</button>
</div>
<p class="print-only">Hull number: <span id="hull-printed">____________________</span></p>
<p id="message" role="status" aria-live="polite" class="scripted"></p>
<p class="hint scripted">Ticks and gap readings are kept by this browser on this device, by boat,
layout and hull number; save them to a file to keep or pass on. The file is CSV: side, girth on the
drill line, mark, gap at the hull’s top and at the lip’s low edge, state, drilled; always in mm.</p>
</section>
)html";

const char* const plan_words = R"html(<p class="hint">Seen from above, bow to the left.
<span class="scripted">Keys: Tab goes to the holes here, in each chart and in the schedule; arrow
keys, Home and End move from hole to hole, Page Up and Page Down by ten; Enter chooses a hole, Space
ticks it as drilled. What is chosen in one place is chosen in all.</span></p>
<div class="controls scripted" role="group" aria-label="Size of the plan">
<button type="button" data-zoom="1" aria-pressed="true">Whole boat</button>
<button type="button" data-zoom="2" aria-pressed="false">Twice</button>
<button type="button" data-zoom="4" aria-pressed="false">Four times</button>
</div>
)html";

const char* const plan_legend = R"html(<ul class="legend">
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="sheer" d="M0 4H44"/><path class="drill-line" d="M0 10H44"/></svg> sheer (heavy) and drill line (chain)</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="opening" d="M0 7H44"/></svg> opening: no joint</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="clearance" d="M0 1H44V13H0Z"/><path class="keepout sample" d="M10 1H34V13H10Z"/></svg> keep-out, hatched, in its clearance</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="corner" d="M22 1L28 7L22 13L16 7Z"/></svg> corner</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><circle class="dot" cx="8" cy="7" r="4"/><circle class="dot done" cx="22" cy="7" r="4"/><circle class="ring shown" cx="36" cy="7" r="6"/><circle class="dot" cx="36" cy="7" r="3"/></svg> hole; ticked as drilled; chosen</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="fit good" d="M0 7H44"/></svg> G: gap good</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="fit tight" d="M0 7H44"/></svg> T: tight</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="fit wide" d="M0 7H44"/></svg> W: wide</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="fit interference" d="M0 7H44"/></svg> X: interference</li>
)html";

const char* const chart_words =
    R"html(<h2 id="charts-name">Gap and beads along the girth</h2>
<p class="hint">The gap is square to the hull’s outer face, at three depths: <b>hull top</b> (depth
0, full line), <b>middle</b> of the lap (dashes) and <b>low edge</b> of the lip (dots). Heavy long
dashes are the adhesive’s window. Girth runs along the sheer, starboard and port from the bow datum
aft, the transom from its starboard corner. The line on top is the fit: G good, T tight, W wide, X
interference.</p>
)html";

const char* const hole_panel = R"html(<aside id="hole" aria-labelledby="hole-name">
<h2 id="hole-name">Chosen hole</h2>
<p class="because" id="hole-because">None is chosen: choose one in the plan, a chart or the schedule.</p>
<p id="hole-note"></p>
<div id="hole-open" hidden>
<div class="controls scripted">
<button type="button" data-step="-1">Previous</button>
<button type="button" data-step="1">Next</button>
<label><input type="checkbox" id="hole-drilled"> Drilled</label>
</div>
<form id="reading" class="controls scripted" aria-label="Gap reading at this hole">
<label>Gap at hull top, {0} <input id="gap-top" inputmode="decimal" autocomplete="off" size="7"></label>
<label>Gap at low edge, {0} <input id="gap-low" inputmode="decimal" autocomplete="off" size="7"></label>
<button type="button" id="gap-sign" aria-label="Turn the sign of the gap: minus is interference">±</button>
<label>State <select id="gap-state"><option value="dry">dry, free</option><option value="held">dry, held</option><option value="after">after adhesive</option></select></label>
<button type="submit">Keep reading</button>
<p class="small">0: the parts touch. Minus: interference, by how much they are in each other’s way. What is
typed is also kept when you go to another hole.</p>
<output id="reading-says"></output>
</form>
<p class="small" id="hole-drawn"></p>
<figure>
<div id="section"></div>
<figcaption>Section at the hole, in {0}, vertical and square to the sheer in plan; outboard is to the right.
The fastener is drawn by its length from the lip’s outer face.
Drawn to one scale both ways; a screen is no ruler. Printed at 100 % it is full size: measure the
check bar first.</figcaption>
</figure>
<table class="small values"><caption>All of this hole</caption><tbody id="hole-values"></tbody></table>
</div>
</aside>
)html";

const char* const filter_start =
    R"html(<form id="filter" class="controls scripted" role="search" aria-label="Filter the schedule">
<label>Search <input type="search" id="filter-text" size="24" placeholder="mark, girth, x length, words"></label>
<label>Side <select id="filter-side"><option value="">all</option>)html";

const char* const filter_middle = R"html(</select></label>
<label>Jig <select id="filter-jig"><option value="">all</option>)html";

const char* const filter_end = R"html(</select></label>
<label><input type="checkbox" id="filter-flagged"> Bridged or flagged only</label>
<label><input type="checkbox" id="filter-open"> Not yet drilled</label>
<button type="reset">Show all</button>
<button type="button" id="all-columns" aria-pressed="false">All columns</button>
<output id="filter-count" aria-live="polite"></output>
</form>
<p class="hint for-narrow">What each column measures, and on which surface, stands with the chosen
hole.</p>
<p class="print-only small">On paper the schedule is short: chords, X, Y, Z, the bit’s angles and the
stack are on the drill sheets; all columns are on the screen and in the schedule’s CSV files.</p>
)html";

const char* const chosen_bar =
    R"html(<div id="bar" class="scripted" role="region" aria-label="Chosen hole in short">
<button type="button" data-step="-1" aria-label="Previous hole">◀</button>
<output id="bar-says"></output>
<p id="bar-words">No hole is chosen.</p>
<label><input type="checkbox" id="bar-drilled" disabled> Drilled</label>
<a href="#hole">Details</a>
<button type="button" data-step="1" aria-label="Next hole">▶</button>
</div>
)html";

const char* const strength_link = "<a href=\"#strength\">Strength</a>\n";

const char* const boats_link = "<a href=\"#boats\">Boats built</a>\n";

const char* const strength_start =
    R"html(<section id="strength" aria-labelledby="strength-name">
<h2 id="strength-name">Strength</h2>
)html";

const char* const strength_hint =
    R"html(<p class="hint">Use = limit load × factor / capacity, and 1 is all there is. Bond and
fasteners are each worked for the whole load and never added. These figures are for the naval
architect and the class or flag authority to judge; the adhesive’s data sheet goes before any of
them. strength.pdf is the same as a calculation on paper, with all its reasons.</p>
)html";

const char* const use_legend =
    R"html(<p class="hint">Girth along the sheer, starboard and port from
the bow datum aft, the transom from its starboard corner. Heavy long dashes: the limit, 1. The ring is
the worst place; fine dots across: the load jumps. A use beyond the chart is drawn at its top.</p>
<ul class="legend">
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="use-line" d="M0 7H44"/></svg> adhesive in shear gives first</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="use-line peel" d="M0 7H44"/></svg> adhesive in peel</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="use-line plies" d="M0 7H44"/></svg> laminate between its plies</li>
<li><svg viewBox="0 0 44 14" aria-hidden="true"><path class="use-line through" d="M0 7H44"/></svg> laminate through its thickness</li>
<li>X: no bond line</li>
</ul>
)html";

const char* const use_table_words =
    R"html(<h3 id="use-name">Use of the fasteners by hole, the bond gone</h3>
<p class="hint">Lengths in {}, forces in N; the girth runs on the drill line, lip’s outer face. !: over
1. –: does not apply. <span class="scripted">A hole chosen here is chosen in all, and the filters of
the schedule hold here too.</span></p>
<div class="controls scripted"><button type="button" id="use-order" aria-pressed="false">Worst first</button></div>
<div class="sheet table" id="use-sheet" tabindex="0" role="region" aria-labelledby="use-name">
)html";

const char* const rules_words =
    R"html(<h3 id="rules-name">Published rules beside this joint</h3>
<p class="hint">Whether the joint has to keep a rule is for its naval architect or class to say. Held
to: named in the joint file, [strength] rules. <span class="print-only">Those that do not apply are
left out on paper here; strength.pdf has them all.</span></p>
<div class="sheet table" id="rules-sheet" tabindex="0" role="region" aria-labelledby="rules-name">
<table id="rules-table" class="small"><thead><tr><th scope="col" class="words">state</th>
<th scope="col" class="words">what it asks</th><th scope="col">asks, {0}</th>
<th scope="col" class="words">what the joint has</th><th scope="col">has, {0}</th>
<th scope="col">margin, {0}</th><th scope="col" class="words">source, and how surely known</th>
<th scope="col" class="words">notes</th></tr></thead><tbody>
)html";

const char* const reasons_words = R"html(<div class="reasons">
<h3>Reasons</h3>
<p class="hint">Lengths in mm, forces in N, stresses in N/mm2; six digits shown. Yours: the joint
file’s value at that address. A line without a source has that of the line before.</p>
)html";

}  // namespace sheerlap
