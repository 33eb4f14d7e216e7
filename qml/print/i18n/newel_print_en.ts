<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en">
<context>
    <name>Handout</name>
    <message numerus="yes">
        <source>about %n minute(s)</source>
        <translation>
            <numerusform>about %n minute</numerusform>
            <numerusform>about %n minutes</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>RecordWords</name>
    <message numerus="yes">
        <source>%n time(s) a week</source>
        <translation>
            <numerusform>once a week</numerusform>
            <numerusform>%n times a week</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>TickGrid</name>
    <message numerus="yes">
        <source>any %n day(s)</source>
        <translation>
            <numerusform>any one day</numerusform>
            <numerusform>any %n days</numerusform>
        </translation>
    </message>
</context>
</TS>
