<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>Phrasing</name>
    <message numerus="yes">
        <source>%n second(s)</source>
        <translation>
            <numerusform>%n second</numerusform>
            <numerusform>%n seconds</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s)</source>
        <translation>
            <numerusform>%n time</numerusform>
            <numerusform>%n times</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n set(s) of %1</source>
        <translation>
            <numerusform>%n set of %1</numerusform>
            <numerusform>%n sets of %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) up and down</source>
        <translation>
            <numerusform>%n time up and down</numerusform>
            <numerusform>%n times up and down</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n step(s)</source>
        <translation>
            <numerusform>%n step</numerusform>
            <numerusform>%n steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) there and back</source>
        <translation>
            <numerusform>%n time there and back</numerusform>
            <numerusform>%n times there and back</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n metre(s)</source>
        <translation>
            <numerusform>%n metre</numerusform>
            <numerusform>%n metres</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) %1</source>
        <translation>
            <numerusform>%n time %1</numerusform>
            <numerusform>%n times %1</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n time(s) a week</source>
        <translation>
            <numerusform>%n time a week</numerusform>
            <numerusform>%n times a week</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n minute(s)</source>
        <translation>
            <numerusform>%n minute</numerusform>
            <numerusform>%n minutes</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) kept on this phone, will be sent.</source>
        <translation>
            <numerusform>%n record is kept on this phone and will be sent.</numerusform>
            <numerusform>%n records are kept on this phone and will be sent.</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n record(s) could not be taken by the clinic and stay on this phone. Call the clinic.</source>
        <translation>
            <numerusform>%n record could not be taken by the clinic and stays on this phone. Call the clinic.</numerusform>
            <numerusform>%n records could not be taken by the clinic and stay on this phone. Call the clinic.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>newel::home::PlayerModel</name>
    <message numerus="yes">
        <source>of %n step(s)</source>
        <translation>
            <numerusform>of %n step</numerusform>
            <numerusform>of %n steps</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>of %n time(s)</source>
        <translation>
            <numerusform>of %n time</numerusform>
            <numerusform>of %n times</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>newel::home::PracticeModel</name>
    <message numerus="yes">
        <source>%1 of %n time(s)</source>
        <translation>
            <numerusform>%1 of %n time</numerusform>
            <numerusform>%1 of %n times</numerusform>
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
        <source>%n to do</source>
        <translation>
            <numerusform>%n to do</numerusform>
            <numerusform>%n to do</numerusform>
        </translation>
    </message>
</context>
</TS>
