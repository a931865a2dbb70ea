<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>away</name>
    <message>
        <source>Away from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back at</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away this evening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an absence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is missed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is always there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hide what has gone by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gone by: {count}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>backups</name>
    <message>
        <source>Today&apos;s backup was not made. {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backed up. It is with the others of this studio.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring back the backup of {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The studio is as it was on {when}. How it was before is in a backup, and can be undone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back up now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bring this one back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole studio, plan included, is backed up once on each day on which it is opened, whenever you ask, and before one is brought back. The ten newest stay, and for thirty days the last of each day.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They are in {folder}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no folder here to keep backups in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no backup of this studio yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{pieces} pieces, {orders} orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Products</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is the studio as it is now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces, orders, products and hands are as they are now.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would come back: {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would go: {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>would be as before: {names}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{names} and {count} more</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>bench</name>
    <message>
        <source>Bench - Studio planner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave the bench</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing needs hands.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All poured: write it down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not yet: forget the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A met B: start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next thing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Windows closing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Poured: {piece}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>until it begins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overdue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>since A met B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Else: {what}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>else sand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be saved later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{closes}  {piece}, {coat}: closes {left}, {saved}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be displayed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>may be packed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fully cured</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>changes</name>
    <message>
        <source>Undone: {words}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Done again: {words}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Do again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>days</name>
    <message>
        <source>Mon</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fri</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sun</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>forms</name>
    <message>
        <source>Write a number here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write a whole number here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{label}, time</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{text} is not a number; write for example 1.5.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>hands</name>
    <message>
        <source>Hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is named yet. Add yourself, then paint your hours.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no weekly hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{hours} a week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wakes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Goes to bed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add hours on the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove the chosen hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag over a day to add hours, an end to change them, the middle to move them. Keys: Up and Down for the day, Left and Right for the hours, Enter adds, Shift or Alt with Left and Right moves an end, Ctrl all of it, Delete removes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The same hours in rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>waking hours</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>hours</name>
    <message>
        <source>Days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every … weeks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>First date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{rule}: {start} to {end}. Kept as it is.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a row of hours</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>orders</name>
    <message>
        <source>Copy the sentence</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not planned: {reason}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why it is late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What was tried</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeps it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show on the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Display</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pack</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Full cure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>arrive by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stand at the market on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{word}, due {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no date yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{kind} {day}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready for sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaves for sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ready likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leaves likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Has to be there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last pick-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Promised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none, {time} late</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaves {moment}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{safe} (likely {likely})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I cannot give you a date for {name} yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} will be ready on {day}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} can leave on {day} and should be with you by {arrives}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order, or market</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Promised to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The market opens</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>May go once it may</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days on which parcels go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last pick-up of the day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Days under way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Packing each piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How much being late counts (1 is usual)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No order yet. Add one to see when it can leave.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chosen order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a studio first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An order needs a piece; add one under Pieces first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an order to see when it can leave.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add an order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove {name}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move an order</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pages</name>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Products</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Studio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>pieces</name>
    <message>
        <source>poured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to come</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to come, {when}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{joint}, test first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opens {opens}, stays open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opens {opens}, closes {closes}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>prime</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>seal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour pour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glitter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lock coat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top coat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on bare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet in wet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scuffed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>MDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>timber</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plywood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>glass</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plastic</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rectangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>oval</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>underside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{film} of film; the blank is cut short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bare {material}, {thick} thick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, rim {rim} high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The stack in section</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chosen: {coat}. </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no coat on that side to change places with.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>planning</name>
    <message>
        <source>Plan again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best so far {words}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not planned: {why}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planning was stopped; the plan is as it was.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>rules</name>
    <message>
        <source>Air and dust</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands and promises</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Films</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What does not stay on the piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin above the dew point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A surface must be at least so much warmer than the dew point.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin kept for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So long after a pour that margin is still held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steady room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The room may warm by so much while bare porous work is coated; more drives air out of the pores and blows bubbles.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dust settles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So long after sanding nothing is poured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spare before a promise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The plan tries to be ready so long before each promise: one recoat cycle, in case a coat goes wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turning a piece</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So long somebody&apos;s hands are needed to turn a piece over.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Washing and sanding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So long it takes to wash and scuff one piece for its next coat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pulling tape, trimming drips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So long it takes for one piece, by whoever is awake.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Film that may run off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a rim, a thicker film is warned about.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Film that runs off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Without a rim, a thicker film is refused.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Film on an edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An upright edge holds no more than this.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Film on a rim&apos;s inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So much stays on the inner wall of a rim.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step of the scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The smallest difference that your scale shows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ratio may be off by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How far A to B may be off. With the scale&apos;s step it decides the smallest mix that can be weighed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dripping off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of a film that runs over the edge, so much is lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dripping off inside a rim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of a film that a rim holds, so much is lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left in a cup</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So much stays in every cup and on its stick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drunk by bare wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A bare face of MDF, timber or plywood drinks so much, in per cent of a thin first coat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So much more is mixed than a coat should take.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Price of heating, each kWh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the studio&apos;s currency; 0 where nobody asks.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules of thumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the trade does where no data sheet says anything. Change what your studio does otherwise; plans and amounts follow.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How a surface follows the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By ISO 8502-4: {usual}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unless you enter it: {usual}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Common practice: {usual}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{name} is as warm as the air after about so long.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>set-up</name>
    <message>
        <source>Hands and their hours</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The room&apos;s temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A level spot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A product with its data sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A piece with its coats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>An order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pour takes an hour or more of somebody&apos;s hands, and a window is of use only when somebody is there and awake.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The room&apos;s temperature sets how fast every coat cures; its humidity says when a surface is too damp to be coated.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A wet piece lies level on its spot until it can be handled. Spots decide how many pieces can be under way at once.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the sheet come the hours after which the next coat goes on, the piece can be handled, and packed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A plan is made of coats: which product, how thick, on which face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Can wait. With a promised date the plan knows what has to be ready first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter spots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter products</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter pieces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter orders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there, with something to know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>can wait</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>still lacks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a studio, or make a new one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything that a plan needs is there: planning can begin.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{done} of {all} are there. Next: {next}.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>studio</name>
    <message>
        <source>Sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set-up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room and shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units and words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules of thumb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Backups</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>timeline</name>
    <message>
        <source>Set up the studio</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>units</name>
    <message>
        <source>Temperatures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees Celsius</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>degrees Fahrenheit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Masses</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grams</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ounces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes of pieces and spots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness of a film</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Volumes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Times of day</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>24 hours, as 18:30</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>12 hours, as 6:30 pm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A week begins on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mils, thousandths of an inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millilitres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>US fluid ounces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>imperial fluid ounces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The studio&apos;s name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Currency, in three letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Units and words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Everything on the desk is shown and typed in these units. What is kept stays exact: nothing is rounded by changing them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>time zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>currency</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>first day of the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>units</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>So it reads: {now}, {warm}, {mass} in {volume}, a board of {length}, {film} of film.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no time zone called {typed}; type a city and choose one.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>week</name>
    <message>
        <source>Mo Tu We Th Fr Sa Su</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working hours of the week</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hours yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{day} {start} to {end}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Monday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tuesday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wednesday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thursday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Friday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saturday</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sunday</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
