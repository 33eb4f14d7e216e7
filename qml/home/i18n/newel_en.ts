<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>CourseExtras</name>
    <message numerus="yes">
        <source>Worn on %Ln day(s), at most %1 in a day.</source>
        <translation>
            <numerusform>Worn on %Ln day, at most %1 in a day.</numerusform>
            <numerusform>Worn on %Ln days, at most %1 in a day.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>Phrasing</name>
    <message numerus="yes">
        <source>%Ln second(s)</source>
        <translation>
            <numerusform>%Ln second</numerusform>
            <numerusform>%Ln seconds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s)</source>
        <translation>
            <numerusform>%Ln time</numerusform>
            <numerusform>%Ln times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln set(s) of %L1</source>
        <translation>
            <numerusform>%Ln set of %L1</numerusform>
            <numerusform>%Ln sets of %L1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) up and down</source>
        <translation>
            <numerusform>%Ln time up and down</numerusform>
            <numerusform>%Ln times up and down</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln step(s)</source>
        <translation>
            <numerusform>%Ln step</numerusform>
            <numerusform>%Ln steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) there and back</source>
        <translation>
            <numerusform>%Ln time there and back</numerusform>
            <numerusform>%Ln times there and back</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln metre(s)</source>
        <translation>
            <numerusform>%Ln metre</numerusform>
            <numerusform>%Ln metres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) %1</source>
        <translation>
            <numerusform>%Ln time %1</numerusform>
            <numerusform>%Ln times %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) a week</source>
        <translation>
            <numerusform>%Ln time a week</numerusform>
            <numerusform>%Ln times a week</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln minute(s)</source>
        <translation>
            <numerusform>%Ln minute</numerusform>
            <numerusform>%Ln minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln record(s) kept on this phone, will be sent.</source>
        <translation>
            <numerusform>%Ln record is kept on this phone and will be sent.</numerusform>
            <numerusform>%Ln records are kept on this phone and will be sent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln record(s) could not be taken by the clinic and stay on this phone. Call the clinic.</source>
        <translation>
            <numerusform>%Ln record could not be taken by the clinic and stays on this phone. Call the clinic.</numerusform>
            <numerusform>%Ln records could not be taken by the clinic and stay on this phone. Call the clinic.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WearPage</name>
    <message numerus="yes">
        <source>%Ln minute(s) left</source>
        <translation>
            <numerusform>%Ln minute left</numerusform>
            <numerusform>%Ln minutes left</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>WearWords</name>
    <message numerus="yes">
        <source>%Ln hour(s)</source>
        <translation>
            <numerusform>%Ln hour</numerusform>
            <numerusform>%Ln hours</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%Ln time(s) a day for %1</source>
        <translation>
            <numerusform>once a day for %1</numerusform>
            <numerusform>%Ln times a day for %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>newel::home::PlayerModel</name>
    <message numerus="yes">
        <source>of %Ln step(s)</source>
        <translation>
            <numerusform>of %Ln step</numerusform>
            <numerusform>of %Ln steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>of %Ln time(s)</source>
        <translation>
            <numerusform>of %Ln time</numerusform>
            <numerusform>of %Ln times</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>newel::home::PracticeModel</name>
    <message numerus="yes">
        <source>%L1 of %Ln time(s)</source>
        <translation>
            <numerusform>%L1 of %Ln time</numerusform>
            <numerusform>%L1 of %Ln times</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>newel::home::TakeAlongModel</name>
    <message numerus="yes">
        <source>%n record(s) have not reached the clinic and would be lost.</source>
        <translation>
            <numerusform>%n record has not reached the clinic and would be lost.</numerusform>
            <numerusform>%n records have not reached the clinic and would be lost.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>newel::home::TodayModel</name>
    <message numerus="yes">
        <source>%Ln to do</source>
        <translation>
            <numerusform>%Ln to do</numerusform>
            <numerusform>%Ln to do</numerusform>
        </translation>
    </message>
</context>
</TS>
